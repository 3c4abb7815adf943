/** Why something about recipes and habits was not done. */
export type RecipesRefusal = 'value-out-of-range' | 'value-not-offered' | 'month-day-wrong' | 'finish-before-start';

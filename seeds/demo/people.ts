/** The demo society's people, all invented; plot D9 is to let. A holding with several names is shared by equal rights. */
export type Household = {
  readonly plots: readonly string[];
  readonly people: readonly string[];
  /** Has no e-mail and no account: the secretary acts for them. */
  readonly onPaper?: boolean;
};

export const households: readonly Household[] = [
  { plots: ['A1'], people: ['Marnie Oakhurst'] },
  { plots: ['A2'], people: ['Tobias Fenwright'], onPaper: true },
  { plots: ['A3'], people: ['Ines Calloway', 'Ruben Calloway'] },
  { plots: ['A4', 'B4'], people: ['Gwyneth Apsley'] },
  { plots: ['A5'], people: ['Padraig Mullen'] },
  { plots: ['A6'], people: ['Shirin Darvish'] },
  { plots: ['A7'], people: ['Len Hobday'], onPaper: true },
  { plots: ['A8'], people: ['Olu Adebanjo'] },
  { plots: ['A9'], people: ['Freda Tansley', 'Kit Marlpit'] },
  { plots: ['A10'], people: ['Bronwen Sayle'] },
  { plots: ['A11'], people: ['Josef Hradil'] },
  { plots: ['B1'], people: ['Edith Garroway'], onPaper: true },
  { plots: ['B2'], people: ['Samir Khoury'] },
  { plots: ['B3'], people: ['Nell Thackaberry'] },
  { plots: ['B5'], people: ['Dorian Welkin'] },
  { plots: ['B6'], people: ['Hoa Tran', 'Minh Tran'] },
  { plots: ['B7'], people: ['Agnes Rookwood'], onPaper: true },
  { plots: ['B8'], people: ['Piotr Zalewski'] },
  { plots: ['B9'], people: ['Callum Strang'] },
  { plots: ['B10'], people: ['Winifred Yarrow'], onPaper: true },
  { plots: ['B11'], people: ['Amara Nwosu'] },
  { plots: ['C1'], people: ['Rosalind Peake'] },
  { plots: ['C2'], people: ['Harold Stent'], onPaper: true },
  { plots: ['C3'], people: ['Yusuf Demir'] },
  { plots: ['C4'], people: ['Tilda Brackley', 'Owen Brackley'] },
  { plots: ['C5'], people: ['Mags Penhallow'] },
  { plots: ['C6'], people: ['Viktor Sandel'] },
  { plots: ['C7'], people: ['Joan Ferriby'], onPaper: true },
  { plots: ['C8'], people: ['Leila Haddad'] },
  { plots: ['C9'], people: ['Stanley Crook'], onPaper: true },
  { plots: ['C10'], people: ['Bea Longmire'] },
  { plots: ['C11'], people: ['Ravi Menon'] },
  { plots: ['D1'], people: ['Constance Hale'] },
  { plots: ['D2'], people: ['Eamon Duffy'], onPaper: true },
  { plots: ['D3'], people: ['Saskia Veldhuis'] },
  { plots: ['D4'], people: ['Percy Whitlock'], onPaper: true },
  { plots: ['D5'], people: ['Farida Osei'] },
  { plots: ['D6'], people: ['Gus Thorley', 'Lottie Thorley'] },
  { plots: ['D7'], people: ['Mei Castellan'] },
  { plots: ['D8'], people: ['Albert Minns'], onPaper: true },
  { plots: ['D10'], people: ['Noor Rahimi'] },
];

/** Known by its number and rods alone. */
export const unmeasured: Household & { readonly quarterRods: number } = {
  plots: ['E1'],
  people: ['Horace Bundy'],
  onPaper: true,
  quarterRods: 26,
};

/** Shown as sign-ins, beside the officers: a couple on a shared plot, and a newcomer to old ground. */
export const shown: readonly string[] = ['Ines Calloway', 'Bea Longmire'];

import type { SourceKey } from './sources';

/** What is being done; a caution belongs to some of it. */
export type CautionedWork =
  | 'digging'
  | 'heavy-soil'
  | 'lifting'
  | 'barrowing'
  | 'manure'
  | 'compost'
  | 'meal'
  | 'lime'
  | 'straw'
  | 'stored-food'
  | 'stored-potatoes';

export type Caution = {
  readonly key: string;
  /** Our own words, each with its source: what to do, and why. */
  readonly words: string;
  readonly when: readonly CautionedWork[];
  readonly source: SourceKey;
};

const byHand: readonly CautionedWork[] = ['digging', 'lifting', 'barrowing'];
const dirty: readonly CautionedWork[] = ['digging', 'manure', 'compost', 'meal'];
const stored: readonly CautionedWork[] = ['stored-food', 'stored-potatoes'];
const everything: readonly CautionedWork[] = [...byHand, 'heavy-soil', ...dirty, 'lime', 'straw', ...stored];

// The most pressing first: this is the order in which they are shown.
// biome-ignore format: one caution in few lines
export const cautions: readonly Caution[] = [
  { key: 'stop', when: byHand, source: 'common-practice',
    words: 'Stop when it hurts, and when you are dizzy or out of breath. For a pain in the chest call for help at once.' },
  { key: 'ask-first', when: byHand, source: 'ccohs',
    words: 'With a bad back or heart, or if you are no longer young, ask a doctor before you start, or leave the digging to others.' },
  { key: 'warm-up', when: byHand, source: 'ccohs',
    words: 'Warm up first: walk about, then bend and stretch for a few minutes.' },
  { key: 'small-spadefuls', when: ['digging'], source: 'ccohs',
    words: 'Take small spadefuls. Working fast, spade and soil together should weigh no more than 5 to 7 kg.' },
  { key: 'pauses', when: ['digging', 'barrowing'], source: 'ccohs',
    words: 'Never shovel for longer than a quarter of an hour at a time. In great heat or cold, rest as long as you worked.' },
  { key: 'wet-clay', when: ['heavy-soil'], source: 'rhs-double-digging',
    words: 'Leave clay alone while it sticks to spade and boots. Worked or trodden wet it packs down, and the good of deep digging is lost.' },
  { key: 'lifting', when: ['lifting', 'manure', 'straw', 'lime'], source: 'hse-filters',
    words: 'Think twice above 25 kg for a man or 16 kg for a woman, and far below that if you twist, reach, lift often or carry further than 10 m. These are no safe limits.' },
  { key: 'barrow', when: ['barrowing'], source: 'hse-filters',
    words: 'Fill the barrow so that it starts with an easy push, and less on soft, steep or rough ground.' },
  { key: 'boots', when: ['digging'], source: 'common-practice',
    words: 'Wear strong boots, look where the tines go, and never leave a fork or a rake lying with its points up.' },
  { key: 'tetanus', when: dirty, source: 'cdc-gardening',
    words: 'Tetanus lives in soil and manure and enters through cuts. Keep your protection up to date, clean and cover every cut, and ask a doctor about a deep or dirty one.' },
  { key: 'gloves', when: [...dirty, 'lime'], source: 'rhs-compost-safety',
    words: 'Wear gloves, and wash your hands before you eat, drink or smoke.' },
  { key: 'germs', when: ['manure'], source: 'fsa-manure',
    words: 'Manure can carry E. coli O157, Salmonella, Listeria and Campylobacter. Keep it off whatever is eaten raw, and small children off it.' },
  { key: 'legionella', when: ['compost', 'manure'], source: 'rhs-compost-safety',
    words: 'Damp down what is dry before you move it, open bags away from your face, and work in moving air: the dust can carry Legionella.' },
  { key: 'moulds', when: ['compost', 'manure', 'straw'], source: 'aspergillosis',
    words: 'With asthma or weak defences, let somebody else turn heaps and shake out straw: the moulds harm lungs. A plain dust mask does not hold them back; that takes N95 or better.' },
  { key: 'burns', when: ['lime'], source: 'common-practice',
    words: 'Lime and ash burn wet skin and eyes. Wear gloves and glasses, and rinse at once with plenty of water.' },
  { key: 'dust', when: ['meal', 'lime'], source: 'common-practice',
    words: 'Strew meal, ash and lime on a still day with your back to the wind, low down, and keep the dust out of eyes and mouth.' },
  { key: 'green', when: ['stored-potatoes'], source: 'common-practice',
    words: 'Green, sprouting or bitter potatoes can poison. Keep potatoes in the dark, cut green and eyes away deep, and throw out whatever is green throughout or tastes bitter.' },
  { key: 'mouldy', when: stored, source: 'common-practice',
    words: 'What is mouldy, rotten or slimy is not for eating: throw it out whole, since mould reaches further than it shows. Then wash your hands, and what it touched.' },
  { key: 'others-know', when: everything, source: 'common-practice',
    words: 'The label on the bag, the rules of your site and the advice of a doctor go before anything here.' },
];

/** The cautions that belong to the work in hand, the most pressing first. */
export function cautionsFor(works: readonly CautionedWork[]): readonly Caution[] {
  return cautions.filter(({ when }) => works.some((work) => when.includes(work)));
}

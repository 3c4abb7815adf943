import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { lossModel, storeAnswers } from '@/lib/domain/catalogue/store-model';
import { lastsMethod } from '@/lib/domain/store/lasts';

const sourcesOfModel = [...new Set(Object.values(lossModel).map(({ source }) => sourceWords(source)))];

/** The model, one tap away: what it sets out from, what it learns from, and what it leaves out. */
export function HowItIsReckoned() {
  return (
    <Sheet title="How it is reckoned">
      <p>
        A day alone would be a guess. So there are always two days, between which it falls in{' '}
        {lossModel.lifeRangePercent.value} cases of a hundred, and the middle one.
      </p>
      <Reason ask="The model">
        <ul className="small">
          <li>
            It sets out from the published life of the kind, and is less sure where your place is not known to be as
            that account wants.
          </li>
          <li>
            Each going over counts as data: pieces found bad, used and sound. The more of them, the less the book says
            and the more your own shed.
          </li>
          <li>Losses come ever faster with age, along one printed curve of winter squash, taken for all kinds.</li>
          <li>
            Your use is what you say, taken to be off by about a third, and corrected by what your goings over show.
          </li>
          <li>The weeks to come are allowed to be harder or easier on the store than those behind.</li>
          <li>
            Enough is yes from {storeAnswers.enoughFromPercent.value} % on, no up to{' '}
            {storeAnswers.tooLittleToPercent.value} %, and between the two it can’t be told.
          </li>
          <li>Left out: drying, and rot that runs through a whole heap between two rounds.</li>
        </ul>
        <p className="small">
          Method: {lastsMethod.name}, version {lastsMethod.version}. Sources: {sourcesOfModel.join('; ')}.
        </p>
      </Reason>
    </Sheet>
  );
}

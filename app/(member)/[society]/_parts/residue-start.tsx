import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { bioassayProtocols, bioassayRules } from '@/lib/domain/catalogue/bioassay-protocols';
import { startAction } from '../ground/residue/actions';

type Props = { society: string; deliveryId: string | null; today: string };

/** Set out the pots of a test: of a delivery, or of one's own manure. */
export function StartTest({ society, deliveryId, today }: Props) {
  const { leastTestPots, leastControlPots, leastSeedsAPot } = bioassayRules;
  const [mix] = bioassayProtocols;
  const number = (name: string, label: string, value: number, hint?: string) => (
    <TextField
      name={name}
      label={label}
      value={String(value)}
      inputMode="numeric"
      className="short-field"
      {...(hint ? { hint } : {})}
    />
  );
  return (
    <Form
      action={startAction.bind(null, society, deliveryId)}
      writeId={randomUUID()}
      submit="Start the test"
      labels={{ name: 'Name', testPots: 'Pots with manure', controlPots: 'Pots without', seedsAPot: 'Seeds' }}
    >
      <TextField
        name="name"
        label="Which manure, and from where"
        hint={
          deliveryId === null
            ? 'such as: horse manure from the stables, October. Nobody else sees it.'
            : 'such as: from the back of the heap. All members see it.'
        }
      />
      <div className="row">
        {number('manureParts', 'Parts of manure', mix?.manureParts ?? 1)}
        {number('mixParts', 'to parts of potting mix', mix?.mixParts ?? 1)}
      </div>
      <div className="row">
        {number('testPots', 'Pots with manure', leastTestPots, `${leastTestPots} or more`)}
        {number('controlPots', 'Pots without', leastControlPots, `${leastControlPots} or more, of the mix alone`)}
        {number('seedsAPot', 'Seeds in each', leastSeedsAPot, `peas or beans, ${leastSeedsAPot} or more`)}
      </div>
      <TextField name="sownOn" type="date" label="Sown on" value={today} hint="Empty: not sown yet." />
    </Form>
  );
}

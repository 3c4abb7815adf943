import { NoteField, SelectField, TextField } from '@/app/_ui/field';
import { wallTime } from '@/app/_ui/wall-time';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import {
  settingInForce,
  type SettingKey,
  settingParts,
  settings,
  type SettingValues,
} from '@/lib/domain/catalogue/settings';
import { settingValueWords } from '@/lib/domain/catalogue/setting-value-words';
import type { readBallot } from '@/lib/usecases/ballots/read-ballots';
import { HowToWrite } from '../../_parts/how-to-write';

type Ballot = Awaited<ReturnType<typeof readBallot.run>>['ballot'];

type Props = {
  /** What is changed; nothing where it is new. */
  readonly ballot: Ballot | null;
  readonly values: SettingValues;
  readonly closesAt: string;
  readonly timeZone: string;
};

/** What a question says, who raises a hand, and what carries it. */
export function QuestionFields({ ballot, values, closesAt, timeZone }: Props) {
  const choices = ballot?.choices.filter(({ stands }) => stands === 'choice').map(({ words }) => words);
  return (
    <>
      <TextField
        name="title"
        label="The question"
        value={ballot?.title ?? ''}
        hint="such as: Shall ground be manured every four years?"
      />
      <NoteField name="body" label="What there is to say for it, and against" rows={6} value={ballot?.body ?? ''} />
      <HowToWrite />
      <SelectField
        name="kind"
        label="Asked as"
        value={ballot?.kind ?? 'motion'}
        choices={[
          { value: 'motion', label: 'a motion: for, against or abstain' },
          { value: 'choice', label: 'a choice between several' },
        ]}
      />
      <NoteField
        name="choices"
        label="The choices"
        rows={3}
        value={choices?.join('\n') ?? ''}
        hint="Of a choice between several: two to eight, one on a line. To abstain is always offered."
      />
      <SelectField
        name="handsBy"
        label="One hand for each"
        value={ballot?.handsBy ?? 'member'}
        choices={[
          { value: 'member', label: 'member' },
          { value: 'holding', label: 'holding: any of its holders raises it' },
        ]}
      />
      <TextField
        name="closesAt"
        type="datetime-local"
        label="Closes"
        value={ballot ? wallTime(ballot.closesAt, timeZone) : closesAt}
        hint="Day and time, on the society’s clock."
      />
      <TextField
        name="quorum"
        label="Quorum"
        inputMode="numeric"
        className="short-field"
        value={String(ballot?.quorum.amount ?? 25)}
        hint="Below it nothing carries. Those who abstain count towards it. 0: none."
      />
      <SelectField
        name="quorumKind"
        label="Quorum counted in"
        value={ballot?.quorum.kind ?? 'percent'}
        choices={[
          { value: 'percent', label: 'percent of those entitled' },
          { value: 'number', label: 'hands' },
        ]}
      />
      <SelectField
        name="carriedBy"
        label="Carries with"
        value={ballot?.carriedBy ?? 'more'}
        choices={[
          { value: 'more', label: 'more for than against, or than for any other choice' },
          { value: 'two-thirds', label: 'two thirds of those that do not abstain' },
        ]}
      />
      <RuleFields setting={ballot?.setting ?? null} values={values} />
    </>
  );
}

/** A rule of the society that a motion would change. */
function RuleFields({ setting, values }: { setting: Ballot['setting']; values: SettingValues }) {
  const label = (key: SettingKey) => `${settings[key].name}: ${settingValueWords(key, settingInForce(values, key))}`;
  return (
    <>
      <SelectField
        name="settingKey"
        label="Rule that changes if it is carried"
        value={setting?.key ?? ''}
        empty="none"
        choices={settingParts.flatMap(({ name, keys }) =>
          keys.map((key) => ({ value: key, label: label(key), group: name })),
        )}
        hint="With what holds today. Once the motion is carried the rule follows by itself."
      />
      <TextField
        name="settingValue"
        label="New value"
        className="short-field"
        value={setting ? typedValue(setting) : ''}
        hint="In the rule’s own unit, as it stands behind its name; a day as 1 May; a choice in its words."
      />
      <TextField
        name="settingFrom"
        type="date"
        label="Holds from"
        value={setting?.from ?? ''}
        hint="The day on which the count closes, or later. Empty: that day."
      />
    </>
  );
}

function typedValue({ key, value }: NonNullable<Ballot['setting']>): string {
  const { kind } = settings[key];
  if (kind === 'choice') return settingValueWords(key, value);
  return kind === 'month-day' ? formatMonthDay(String(value)) : String(value);
}

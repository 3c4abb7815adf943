import { SelectField, TextField } from '@/app/_ui/field';
import type { readTopics } from '@/lib/usecases/board/read-board';

type Topics = Awaited<ReturnType<typeof readTopics.run>>['topics'];

/** What a thread is about: one of the site’s own things, or the site at large. */
export function TopicField({ topics, value }: { topics: Topics; value: string }) {
  const { crops, beds, deliveries, troubles } = topics;
  const choices = [
    ...beds.map(({ key, name, plotNumber }) => ({
      value: `bed:${key}`,
      label: `bed ${name}, plot ${plotNumber}`,
      group: 'Your beds',
    })),
    ...deliveries.map(({ key, name }) => ({ value: `delivery:${key}`, label: name, group: 'Deliveries' })),
    ...crops.map(({ key, name }) => ({ value: `crop:${key}`, label: name, group: 'Crops' })),
    ...troubles.map(({ key, name }) => ({ value: `trouble:${key}`, label: name, group: 'Troubles of the soil' })),
  ];
  const day = /^date:(.+)$/.exec(value)?.[1];
  return (
    <>
      <SelectField
        name="topic"
        label="About"
        empty="the site at large"
        value={day === undefined ? value : ''}
        choices={choices}
      />
      <TextField name="aboutDay" type="date" label="Or a day" value={day ?? ''} hint="Empty: about no day." />
    </>
  );
}

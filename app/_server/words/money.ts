import { formatPounds } from '@/lib/domain/ledger/pounds';
import type { MoneyRefusal } from '@/lib/usecases/refusals/money';
import type { Words } from './shape';

export const moneyWords: Words<MoneyRefusal> = {
  'day-to-come': ({ today }) => `That day is still to come. Give today, ${today}, or a day before it.`,
  'account-unknown': () => 'Choose an account from the list.',
  'account-retired': ({ name }) => `“${name}” is retired. Take it up again under accounts, or choose another.`,
  'account-name-taken': ({ name }) => `There is an account “${name}” already. Use that one, or give another name.`,
  'account-built-in': () => 'The ledger has an account of that name by itself. Give another name.',
  'account-not-empty': ({ minor }) =>
    `${formatPounds(Number(minor))} stand on it. Move that to another account first; then it can be retired.`,
  'same-account': () => 'Money goes from one account to another. Choose two different ones.',
  'nobody-to-charge': ({ on }) => `No plot was let on ${on}, so there is nobody to charge.`,
  'reversed-already': () => 'This entry was taken back already. Nothing was changed.',
  'is-correction': () => 'This entry takes another back, and stands. Enter anew what is right.',
  'entry-of-delivery': () =>
    'This entry is the price of a delivery, shared out. Put its price right on the delivery’s page; the shares are then worked out anew.',
  'price-unchanged': ({ minor }) => `It is entered at ${formatPounds(Number(minor))} already. Nothing was changed.`,
  'nothing-left-over': () => 'Nothing of this delivery is left over, so there is nothing to write off.',
};

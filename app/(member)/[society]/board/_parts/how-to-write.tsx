import { Reason } from '@/app/_ui/sheet';

/** What a post makes of a few signs. */
export function HowToWrite() {
  return (
    <Reason ask="Stress, lists and links">
      <ul>
        <li>*these words* are slanted, **these** stand out</li>
        <li>lines that begin with “- ” or “1. ” make a list, with “&gt; ” a quotation</li>
        <li>an empty line begins a new paragraph</li>
        <li>the address of a delivery, of a bed or of a comparison of beds shows how that stands, below the thread</li>
      </ul>
    </Reason>
  );
}

import { Sheet } from './sheet';

/** How an order of seed is worked out, in words that a member can follow with a pencil. */
export function HowItIsSplit() {
  return (
    <Sheet title="How it is split">
      <ol>
        <li>All lists are added up, and whole packs that cover them are bought for the least money.</li>
        <li>
          The price of a thing is split by how much of it each is given, to the penny; postage and the like by what each
          pays for seed. What is left over in the packs is the society’s to give away.
        </li>
        <li>
          If too little comes, it is given out one by one, round by round, to everybody who still wants some, so small
          wants are met first. Only what came is paid for.
        </li>
        <li>
          Odd pennies, and the odd ones of a last round, go by lot: by the SHA-256 of “order:holding”, the smallest
          first, which nobody chooses.
        </li>
      </ol>
    </Sheet>
  );
}

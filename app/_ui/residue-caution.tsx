import { Caution } from './sheet';

/** What is said wherever bought-in manure is tested, held or doubted. */
export function ResidueCaution() {
  return (
    <Caution>
      No test of a few pots proves manure clean. While you doubt it, put none of it on any plot and none on a shared
      heap; keep it where it lies, and tell the supplier and the secretary. Where it goes then is for the supplier, your
      society’s rules, the law where you are and somebody qualified to say. Wear gloves, damp down dust, and wash your
      hands.
    </Caution>
  );
}

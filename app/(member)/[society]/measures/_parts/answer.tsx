import type { ReactNode } from 'react';
import { Reason, Sheet } from '@/app/_ui/sheet';

/** An answer, with its arithmetic and its source one tap away. */
export function Answer({ title, children, why }: { title: string; children?: ReactNode; why: ReactNode }) {
  return (
    <div className="stack" id="answer" role="status">
      <Sheet title={title}>
        {children}
        <Reason ask="How it is reckoned">{why}</Reason>
      </Sheet>
    </div>
  );
}

'use client';

import { type ReactNode, useEffect, useRef, useState } from 'react';

const steps = [1, 1.6, 2.5, 4, 6.5];

/** Move and enlarge the plan by finger, mouse or keys. It opens at one's own plot where the screen is narrow. */
export function PlanViewer({ children }: { children: ReactNode }) {
  const frame = useRef<HTMLDivElement>(null);
  const middle = useRef<{ x: number; y: number } | null>(null);
  const [step, setStep] = useState(0);
  useEffect(() => {
    const opening = requestAnimationFrame(() => window.innerWidth < 700 && setStep(3));
    return () => cancelAnimationFrame(opening);
  }, []);
  // On opening, one's own plot comes to the middle; afterwards what was in the middle stays there.
  useEffect(() => {
    const box = frame.current;
    if (!box || step === 0) return;
    if (middle.current) {
      box.scrollLeft = middle.current.x * box.scrollWidth - box.clientWidth / 2;
      box.scrollTop = middle.current.y * box.scrollHeight - box.clientHeight / 2;
      return;
    }
    const own = box.querySelector('[data-mine]');
    if (!own) return;
    const [at, within] = [own.getBoundingClientRect(), box.getBoundingClientRect()];
    box.scrollLeft += at.left + at.width / 2 - within.left - within.width / 2;
    box.scrollTop += at.top + at.height / 2 - within.top - within.height / 2;
  }, [step]);
  const go = (to: number) => {
    const box = frame.current;
    if (!box || to < 0 || to >= steps.length) return;
    // At the smallest step nothing has been looked for yet: enlarging goes to one's own plot.
    middle.current =
      step === 0
        ? null
        : {
            x: (box.scrollLeft + box.clientWidth / 2) / box.scrollWidth,
            y: (box.scrollTop + box.clientHeight / 2) / box.scrollHeight,
          };
    setStep(to);
  };
  const scale = steps[step] ?? 1;
  return (
    <>
      <div
        className="plan-frame"
        ref={frame}
        style={step ? { maxHeight: '75vh' } : undefined}
        role="region"
        aria-label="The plan; scroll to move it, plus and minus change its size"
        tabIndex={0}
        onKeyDown={({ key, ctrlKey, metaKey }) => {
          if (ctrlKey || metaKey) return;
          if (key === '+' || key === '=') go(step + 1);
          if (key === '-') go(step - 1);
        }}
      >
        <div style={{ width: `${scale * 100}%` }}>{children}</div>
      </div>
      <p className="row no-print" style={{ padding: '0.6rem 1rem 0', margin: 0 }}>
        <button type="button" className="button" onClick={() => go(step + 1)} aria-disabled={step === steps.length - 1}>
          Larger
        </button>
        <button type="button" className="button" onClick={() => go(step - 1)} aria-disabled={step === 0}>
          Smaller
        </button>
      </p>
    </>
  );
}

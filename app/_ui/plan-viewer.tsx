'use client';

import { type ReactNode, useEffect, useRef, useState } from 'react';

const steps = [1, 1.6, 2.5, 4, 6.5];

/** Move and enlarge the plan by finger, mouse or keys. It opens at one's own plot where the screen is narrow. */
export function PlanViewer({ children }: { children: ReactNode }) {
  const frame = useRef<HTMLDivElement>(null);
  const [step, setStep] = useState(0);
  useEffect(() => {
    const opening = requestAnimationFrame(() => window.innerWidth < 700 && setStep(3));
    return () => cancelAnimationFrame(opening);
  }, []);
  // Keep the middle of what is seen where it is; on opening, that is one's own plot.
  useEffect(() => {
    const box = frame.current;
    const own = box?.querySelector('[data-mine]');
    if (!box || !own || step === 0) return;
    const [at, within] = [own.getBoundingClientRect(), box.getBoundingClientRect()];
    box.scrollLeft += at.left + at.width / 2 - within.left - within.width / 2;
    box.scrollTop += at.top + at.height / 2 - within.top - within.height / 2;
  }, [step]);
  const scale = steps[step] ?? 1;
  return (
    <>
      <div
        className="plan-frame"
        ref={frame}
        style={step ? { maxHeight: '75vh' } : undefined}
        role="region"
        aria-label="The plan; scroll to move it"
        tabIndex={0}
      >
        <div style={{ width: `${scale * 100}%` }}>{children}</div>
      </div>
      <p className="row no-print" style={{ padding: '0.6rem 1rem 0', margin: 0 }}>
        <button
          type="button"
          className="button"
          onClick={() => setStep(Math.min(step + 1, steps.length - 1))}
          aria-disabled={step === steps.length - 1}
        >
          Larger
        </button>
        <button
          type="button"
          className="button"
          onClick={() => setStep(Math.max(step - 1, 0))}
          aria-disabled={step === 0}
        >
          Smaller
        </button>
      </p>
    </>
  );
}

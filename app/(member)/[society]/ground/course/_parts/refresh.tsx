'use client';

import { useRouter } from 'next/navigation';
import { useEffect } from 'react';

/** Look again every second and a half while something is being worked out. Without script the page says how to. */
export function Refresh() {
  const router = useRouter();
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), 1500);
    return () => clearInterval(timer);
  }, [router]);
  return null;
}

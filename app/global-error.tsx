'use client';

import Failure from './error';

/** What is shown when even the page's frame failed. */
export default function FrameFailure(props: Parameters<typeof Failure>[0]) {
  return (
    <html lang="en-GB">
      <body>
        <Failure {...props} />
      </body>
    </html>
  );
}

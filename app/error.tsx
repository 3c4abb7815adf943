'use client';

export default function Failure({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <main className="page" id="main">
      <div className="page-head wide">
        <h1>Something went wrong on our side</h1>
        <p className="lead">
          Nothing of yours was changed. Please try again. If it stays, give the secretary this number:{' '}
          {error.digest ?? 'none'}.
        </p>
        <p className="actions">
          <button type="button" className="button first" onClick={reset}>
            Try again
          </button>
        </p>
      </div>
    </main>
  );
}

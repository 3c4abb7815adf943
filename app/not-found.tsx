import Link from 'next/link';

export default function NotFound() {
  return (
    <main className="page" id="main">
      <div className="page-head wide">
        <h1>There is nothing here</h1>
        <p className="lead">The address may be mistyped, or it belongs to a society that you are not a member of.</p>
        <p className="actions">
          <Link className="button" href="/">
            To the front page
          </Link>
        </p>
      </div>
    </main>
  );
}

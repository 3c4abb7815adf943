/** Words to look for on the board. */
export function SearchForm({ society, words }: { society: string; words: string }) {
  return (
    <form method="get" action={`/${society}/board/search`} role="search" className="search">
      <label className="sr-only" htmlFor="words">
        Words to look for
      </label>
      <input id="words" name="words" type="search" defaultValue={words} maxLength={200} placeholder="white rot" />
      <button type="submit" className="button">
        Search
      </button>
    </form>
  );
}

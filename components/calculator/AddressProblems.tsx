/** What the page's address held and could not be used. Always plain text, whatever it was. */
export function AddressProblems({ problems }: { problems: readonly string[] }) {
  return (
    <div class="address-problems" aria-live="polite">
      {problems.length > 0 && (
        <>
          <p>
            <strong>Not everything in the address of this page could be used. The rest was.</strong>
          </p>
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}

interface Props {
  /** A sentence for each thing that could not be used. */
  problems: readonly string[]
  /** Nothing was used at all: it is too long. */
  unread?: boolean
}

/** What the page's address held and could not be used. Always plain text, whatever it was. */
export function AddressProblems({ problems, unread = false }: Props) {
  return (
    <div class="address-problems" aria-live="polite">
      {problems.length > 0 && (
        <>
          <p>
            <strong>
              {unread
                ? 'Nothing in the address of this page was used: it is too long.'
                : 'Not everything in the address of this page could be used. The rest was.'}
            </strong>
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

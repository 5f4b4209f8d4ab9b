interface Props {
  reset: () => void
  /** What is said when it was done. */
  wasReset: string
  undoReset: (() => void) | undefined
  wasUndone: string
  say: (words: string) => void
}

/** Back to the start, and back again as long as nothing new was set. */
export function ResetButtons({ reset, wasReset, undoReset, wasUndone, say }: Props) {
  return (
    <>
      <button
        type="button"
        onClick={() => {
          reset()
          say(wasReset)
        }}
      >
        Reset
      </button>
      {undoReset && (
        <button
          type="button"
          onClick={() => {
            undoReset()
            say(wasUndone)
          }}
        >
          Undo reset
        </button>
      )}
    </>
  )
}

/** The model's reason in place of every number. */
export function NoAnswer({ reason }: { reason: string }) {
  return (
    <div class="no-answer">
      <p>
        <strong>The model has no answer for this.</strong> What was set is kept; no figure is shown.
      </p>
      <p>{reason}</p>
    </div>
  )
}

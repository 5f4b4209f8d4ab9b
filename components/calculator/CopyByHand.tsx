import { useEffect, useRef } from 'preact/hooks'

/** The text in a box, chosen, for a browser that refuses the clipboard. */
export function CopyByHand({ text }: { text: string }) {
  const box = useRef<HTMLTextAreaElement>(null)
  useEffect(() => box.current?.select(), [text])
  return (
    <div class="copy-by-hand">
      <label>
        Copy from here
        <textarea ref={box} readOnly rows={6} value={text} />
      </label>
    </div>
  )
}

/** A symbol or rule in plain text with its indices set low: 'ρ_b' becomes ρ with a small b. */
export function MathText({ text }: { text: string }) {
  const [, before, index, after] = /^(.*?)_([\p{L}\p{Nd}]+)(.*)$/su.exec(text) ?? []
  if (index === undefined || after === undefined) return <>{text}</>
  return (
    <>
      {before}
      <sub>{index}</sub>
      <MathText text={after} />
    </>
  )
}

/** What a field goes by on the printed sheet too: quietly, before its name. */
export function FieldNumber({ number }: { readonly number: string | undefined }) {
  return number === undefined ? null : <span className="field-number">{number} </span>
}

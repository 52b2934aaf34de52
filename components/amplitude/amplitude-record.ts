/** The entry of a sight for the record book; nothing where there is no result. */
export function amplitudeRecord(detail: { inputs: Record<string, unknown>; result: unknown } | null): Record<string, unknown> {
  return detail ? { method: 'amplitude', ...detail.inputs, result: detail.result } : {};
}

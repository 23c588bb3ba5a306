/** Keys by which `:cite[...]` names a reference. */
export const isReferenceKey = (key: string): boolean => /^[\p{L}\p{N}][\p{L}\p{N}._:-]*$/u.test(key)
export const referenceKeyHelp = 'A key is of letters, digits, `-`, `_`, `.` and `:`, as in `site-report-14`'

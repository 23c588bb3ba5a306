import { describe, expect, test } from 'vitest'
import { parsePdfValue } from '../../../src/sheets/pdf/parse-pdf-object.ts'
import type { PdfValue } from '../../../src/sheets/pdf/pdf-object.ts'
import { UnreadablePdf } from '../../../src/sheets/pdf/print-failure.ts'
import { pdfDate, pdfText, writePdfValue } from '../../../src/sheets/pdf/write-pdf-object.ts'

const bytes = (value: PdfValue) =>
  typeof value === 'object' && value !== null && 'bytes' in value ? value.bytes : value
const name = (value: PdfValue) => (typeof value === 'object' && value !== null && 'name' in value ? value.name : value)

// The examples of ISO 32000-1, 7.3 (memory).
describe('values as the standard shows them', () => {
  test('numbers: the forms of 7.3.3', () => {
    const forms = ['123', '43445', '+17', '-98', '0', '34.5', '-3.62', '+123.6', '4.', '-.002', '0.0']
    expect(forms.map(form => parsePdfValue(form, 0))).toEqual([
      123, 43445, 17, -98, 0, 34.5, -3.62, 123.6, 4, -0.002, 0,
    ])
  })

  test('names: the escapes of table 4', () => {
    const shown = [
      '/Name1',
      '/ASomewhatLongerName',
      '/A;Name_With-Various***Characters?',
      '/1.2',
      '/$$',
      '/@pattern',
      '/.notdef',
    ]
    expect(shown.map(text => name(parsePdfValue(text, 0)))).toEqual(shown.map(text => text.slice(1)))
    const escaped = ['/Lime#20Green', '/paired#28#29parentheses', '/The_Key_of_F#23_Minor', '/A#42']
    const meant = ['Lime Green', 'paired()parentheses', 'The_Key_of_F#_Minor', 'AB']
    expect(escaped.map(text => name(parsePdfValue(text, 0)))).toEqual(meant)
  })

  test('strings: balanced brackets, line ends and octal codes of 7.3.4.2', () => {
    expect(
      bytes(
        parsePdfValue(
          '(Strings may contain balanced parentheses ( ) and special characters ( * ! & } ^ % and so on).)',
          0,
        ),
      ),
    ).toBe('Strings may contain balanced parentheses ( ) and special characters ( * ! & } ^ % and so on).')
    expect(bytes(parsePdfValue('(These \\\ntwo strings \\\nare the same.)', 0))).toBe('These two strings are the same.')
    expect(bytes(parsePdfValue('(two octal \\245\\307.)', 0))).toBe('two octal \xA5\xC7.')
    expect(bytes(parsePdfValue('(\\0053)', 0))).toBe('\x053')
    expect(bytes(parsePdfValue('(\\053)', 0))).toBe('+')
    expect(bytes(parsePdfValue('()', 0))).toBe('')
  })

  test('hexadecimal strings: an odd last digit counts as followed by 0 (7.3.4.3)', () => {
    expect(bytes(parsePdfValue('<901FA3>', 0))).toBe('\x90\x1F\xA3')
    expect(bytes(parsePdfValue('<901FA>', 0))).toBe('\x90\x1F\xA0')
  })

  test('arrays and dictionaries nest, and references are not numbers', () => {
    const text = '<</Type /Page /Box [0 0 595.2 842] /Parent 12 0 R /Sub <</A true /B null>> /Kids [3 0 R 4 0 R]>>'
    expect(writePdfValue(parsePdfValue(text, 0)).replace(/\n/g, ' ')).toBe(text)
  })

  test('broken values are refused', () => {
    for (const text of ['<</A', '[1 2', '(open', '<12', '<zz>', '<<1 2>>', 'word', '']) {
      expect(() => parsePdfValue(text, 0), text).toThrow(UnreadablePdf)
    }
  })
})

describe('values written', () => {
  test('names: bytes outside the regular characters are escaped and come back', () => {
    expect(writePdfValue({ kind: 'name', name: 'text/markdown' })).toBe('/text#2Fmarkdown')
    for (const odd of ['a b', '(x)', 'F#', 'é', 'a/b'])
      expect(name(parsePdfValue(writePdfValue({ kind: 'name', name: odd }), 0))).toBe(odd)
  })

  test('text: ASCII stays, other text becomes UTF-16 with its mark', () => {
    expect(writePdfValue(pdfText('a (b) \\'))).toBe('(a \\(b\\) \\\\)')
    expect(bytes(parsePdfValue(writePdfValue(pdfText('a ((b) \\')), 0))).toBe('a ((b) \\')
    expect(writePdfValue(pdfText('é'))).toBe('<FEFF00E9>')
    expect(writePdfValue(pdfText('𝑥'))).toBe('<FEFFD835DC65>')
  })

  test('dates: universal time to the second, always the same length', () => {
    expect(bytes(pdfDate(new Date('2026-03-04T05:06:07.890Z')))).toBe("D:20260304050607+00'00'")
    expect(() => pdfDate(new Date('+012026-03-04T05:06:07Z'))).toThrow(RangeError)
    expect(() => pdfDate(new Date('never'))).toThrow(RangeError)
  })
})

import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { xmlText } from './xml-text.ts'

/**
 * Writes a fontconfig file that knows one font folder and keeps its cache in the session's folder, and returns its path. With it a stray
 * character falls to the same font on every machine, and a system without any font prints all the same.
 */
export async function writeFontConfig(session: string, fonts: string): Promise<string> {
  const path = join(session, 'fonts.conf')
  const lines = [
    '<?xml version="1.0"?>',
    '<!DOCTYPE fontconfig SYSTEM "fonts.dtd">',
    `<fontconfig><dir>${xmlText(fonts)}</dir><cachedir>${xmlText(join(session, 'font-cache'))}</cachedir></fontconfig>`,
  ]
  await writeFile(path, `${lines.join('\n')}\n`)
  return path
}

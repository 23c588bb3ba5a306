import { xmlText } from './xml-text.ts'

/** What the metadata of the package says about it. */
export interface PackageFacts {
  readonly title: string
  readonly author?: string
  /** BCP 47, as `en`. */
  readonly language: string
  /** The tool and its version, as `undercroft 1.2.3`. */
  readonly creator?: string
  readonly date: Date
}

/** Returns the same facts as the information dictionary holds, as an XMP packet. Source: ISO 16684-1, 6 to 8. */
export function xmpPacket(facts: PackageFacts, producer: string): string {
  const date = `${facts.date.toISOString().slice(0, 19)}Z`
  const lines = [
    '<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"',
    ' xmlns:xmp="http://ns.adobe.com/xap/1.0/">',
    '<dc:format>application/pdf</dc:format>',
    `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${xmlText(facts.title)}</rdf:li></rdf:Alt></dc:title>`,
    facts.author === undefined
      ? ''
      : `<dc:creator><rdf:Seq><rdf:li>${xmlText(facts.author)}</rdf:li></rdf:Seq></dc:creator>`,
    `<dc:language><rdf:Bag><rdf:li>${xmlText(facts.language)}</rdf:li></rdf:Bag></dc:language>`,
    facts.creator === undefined ? '' : `<xmp:CreatorTool>${xmlText(facts.creator)}</xmp:CreatorTool>`,
    `<pdf:Producer>${xmlText(producer)}</pdf:Producer>`,
    `<xmp:CreateDate>${date}</xmp:CreateDate><xmp:ModifyDate>${date}</xmp:ModifyDate><xmp:MetadataDate>${date}</xmp:MetadataDate>`,
    '</rdf:Description></rdf:RDF></x:xmpmeta>',
    '<?xpacket end="r"?>',
  ]
  return lines.filter(line => line !== '').join('\n')
}

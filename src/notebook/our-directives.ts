/** The directives of ours: references in a sentence, and boxes round paragraphs. */
export const mentionNames = ['value', 'see', 'cite'] as const
export const noticeNames = ['caution', 'hold'] as const

export type MentionName = (typeof mentionNames)[number]
export type NoticeName = (typeof noticeNames)[number]

export const isMentionName = (name: string): name is MentionName => mentionNames.some(ours => ours === name)
export const isNoticeName = (name: string): name is NoticeName => noticeNames.some(ours => ours === name)

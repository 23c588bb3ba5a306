#!/usr/bin/env node
import module from 'node:module'
import { join } from 'node:path'
import { usersCacheFolder } from '../sheets/pdf/cache-folder.ts'

// Where Node can (22.1 and later), it keeps the compiled program for the next run. The rest is imported after that.
const { enableCompileCache } = module as { enableCompileCache?: (folder: string) => unknown }
enableCompileCache?.(join(usersCacheFolder(process.env), 'program'))
await import('./run-process.ts')

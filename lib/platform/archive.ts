import 'server-only';
import { randomUUID } from 'node:crypto';
import { type FileHandle, open, unlink } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { Zip, ZipDeflate } from 'fflate';

/** One file of an archive, its text piece by piece. */
export type ArchiveFile = { readonly name: string; readonly pieces: AsyncIterable<string> | Iterable<string> };

/** An archive that is written and waits to be fetched, once. */
export type WrittenArchive = {
  readonly size: number;
  /** Its bytes; when they are read to the end, or given up, it is gone. */
  readonly stream: () => ReadableStream<Uint8Array>;
  readonly discard: () => Promise<void>;
};

/** Bytes read at a time on the way out. */
const readBytes = 64 * 1024;

/**
 * Write files into one .zip on the disk: only a piece of it is in memory, and whoever fetches it slowly holds no transaction.
 * The file has no name: nobody else can open it, and it goes with this process.
 */
export async function writeArchive(files: AsyncIterable<ArchiveFile>): Promise<WrittenArchive> {
  const handle = await openNameless();
  try {
    const size = await zipInto(handle, files);
    return { size, stream: () => streamOf(handle, size), discard: () => handle.close() };
  } catch (error) {
    await handle.close();
    throw error;
  }
}

async function openNameless(): Promise<FileHandle> {
  const name = path.join(os.tmpdir(), `barrowmoot-archive-${randomUUID()}`);
  const handle = await open(name, 'wx+', 0o600);
  await unlink(name);
  return handle;
}

async function zipInto(handle: FileHandle, files: AsyncIterable<ArchiveFile>): Promise<number> {
  const ready: Uint8Array[] = [];
  let failure: Error | null = null;
  const zip = new Zip((error, chunk) => {
    if (error) failure = error;
    else ready.push(chunk);
  });
  let size = 0;
  const flush = async () => {
    if (failure) throw failure;
    for (const chunk of ready.splice(0)) size += (await handle.write(chunk, 0, chunk.length, size)).bytesWritten;
  };
  const encoder = new TextEncoder();
  for await (const { name, pieces } of files) {
    const entry = new ZipDeflate(name, { level: 6 });
    zip.add(entry);
    for await (const piece of pieces) {
      entry.push(encoder.encode(piece));
      await flush();
    }
    entry.push(new Uint8Array(), true);
    await flush();
  }
  zip.end();
  await flush();
  return size;
}

function streamOf(handle: FileHandle, size: number): ReadableStream<Uint8Array> {
  let at = 0;
  return new ReadableStream({
    async pull(controller) {
      const { bytesRead, buffer } = await handle.read(new Uint8Array(Math.min(readBytes, size - at)), { position: at });
      at += bytesRead;
      if (bytesRead > 0) controller.enqueue(buffer.subarray(0, bytesRead));
      if (at < size && bytesRead > 0) return;
      controller.close();
      await handle.close();
    },
    cancel: () => handle.close(),
  });
}

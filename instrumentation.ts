/** Runs once when a server process starts. */
export async function register() {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { startSendingMail } = await import('@/lib/usecases/mail/send-queued-mail');
  await startSendingMail();
}

// Ports and processes, asked about from outside.
import fs from 'node:fs';
import net from 'node:net';

/** Whether something listens on a port. */
export function answers(port, host = '127.0.0.1') {
  return new Promise((resolve) => {
    const socket = net.connect(port, host, () => {
      socket.destroy();
      resolve(true);
    });
    socket.on('error', () => resolve(false));
  });
}

/** A port that nobody listens on now. */
export function freePort() {
  return new Promise((resolve, reject) => {
    const server = net.createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

/** When a child has ended. */
export function gone(child) {
  return new Promise((resolve) =>
    child.exitCode !== null || child.signalCode ? resolve() : child.once('exit', resolve),
  );
}

/** Whether a process lives. */
export function isAlive(pid) {
  try {
    process.kill(pid, 0);
  } catch (error) {
    // One of somebody else's lives too.
    return error.code === 'EPERM';
  }
  return !isZombie(pid);
}

// Dead, but its parent has not asked: common below a container's first process.
function isZombie(pid) {
  const file = `/proc/${pid}/stat`;
  return fs.existsSync(file) && fs.readFileSync(file, 'utf8').split(') ').at(-1).startsWith('Z');
}

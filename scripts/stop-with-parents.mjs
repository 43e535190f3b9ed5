import { readFileSync } from 'node:fs';

/**
 * Asks this process to end when the npm that started it is gone. npm does not always pass a stop on, and a server that
 * is left alone keeps its port and its lock.
 * @param {number} [milliseconds] between looks
 */
export function stopWithParents(milliseconds = 500) {
  const parent = process.ppid;
  // npm starts a shell, and on some systems the shell stays between.
  const shell = /^(sh|dash|bash)$/.test(nameOf(parent));
  const grandparent = shell ? parentOf(parent) : undefined;
  const look = setInterval(() => {
    if (process.ppid === parent && (!shell || parentOf(parent) === grandparent)) return;
    clearInterval(look);
    process.kill(process.pid, 'SIGTERM');
    setTimeout(() => process.exit(1), 5000).unref();
  }, milliseconds);
  look.unref();
}

/** @param {number} pid */
function nameOf(pid) {
  try {
    return readFileSync(`/proc/${pid}/comm`, 'utf8').trim();
  } catch {
    return '';
  }
}

/** @param {number} pid */
function parentOf(pid) {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
  } catch {
    return undefined;
  }
}

/**
 * Lets a small worker keep the page's files on this device. Where the browser allows none (plain HTTP on a shop network),
 * the page works as before and needs the server at a reload.
 */
export function keepThePage(): void {
  if (!('serviceWorker' in navigator)) return;
  void navigator.serviceWorker.register('/service-worker.js').catch(() => undefined);
}

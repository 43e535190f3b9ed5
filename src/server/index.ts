export { startServer, type RunningServer, type StartSettings } from './start-server.ts';
export { serverApp } from './server-app.ts';
export type { ServerSettings } from './server-settings.ts';

export { startServer, type RunningServer, type StartSettings } from './start-server.ts';
export { serverApp, type ServerSettings } from './server-app.ts';

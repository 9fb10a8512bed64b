export type * from "./calls.js";
export { Client, type Settings, type StreamOptions } from "./client.js";
export * from "./errors.js";
export * from "./models.js";

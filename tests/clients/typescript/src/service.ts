import createClient from "openapi-fetch";
import type { components, paths } from "./v1.js";

/** Where the service listens. */
export const address = process.env["POWERCHECK_ADDRESS"] ?? "http://localhost:5080";

/** The service as its document describes it; of the forms of an answer it asks for JSON. */
export const service = createClient<paths, "application/json" | "application/problem+json">({
  baseUrl: address,
  headers: { Accept: "application/json" },
});

/** A rig as the document describes it. */
export type Rig = components["schemas"]["CheckRequest"];

/** The answer to a check as the document describes it. */
export type Check = components["schemas"]["CheckAnswer"];

import type { Fault, Problem } from "./models.js";

/** Whatever this client itself has to say; what a connection does wrong is an error of fetch. */
export class DuctrunError extends Error {
  override name = "DuctrunError";
}

/** The service has no answer to the question: `problem` says why, with every fault of it in `faults`. */
export class ProblemError extends DuctrunError {
  override name = "ProblemError";
  readonly faults: Fault[];

  /** `headers` are those of the response, such as Retry-After. */
  constructor(readonly problem: Problem, readonly headers: Headers = new Headers()) {
    const faults = problem.errors ?? [];
    const told = faults.map((fault) => `${fault.pointer ?? fault.parameter ?? ""}: ${fault.message}`);
    super([`${problem.title}. ${problem.detail}`, ...told].join("\n"));
    this.faults = faults;
  }

  get status(): number {
    return this.problem.status;
  }
}

/** What came back is no answer of the service: a page of a gateway, or of something else at this address. */
export class UnexpectedAnswerError extends DuctrunError {
  override name = "UnexpectedAnswerError";

  constructor(
    readonly status: number,
    readonly contentType: string,
    readonly content: string,
    readonly headers: Headers = new Headers(),
  ) {
    super(`status ${status}, ${contentType || "no content type"}: that is no answer of the service: something before ` +
      `it has replied, or the address is another's. It begins: ${JSON.stringify(content.slice(0, 300))}`);
  }
}

/**
 * A stream ended before its summary; `answered` questions were answered, the others can be asked again. `reason` is that
 * of the service, where it ended the stream itself: `stopping`, or `idle`.
 */
export class CutOffError extends DuctrunError {
  override name = "CutOffError";

  constructor(readonly answered: number, readonly reason?: string) {
    const told = reason === undefined ? "was cut off" : `was ended by the service (${reason})`;
    super(`the stream ${told} after ${answered} answers`);
  }
}

// What came back, and whether that is what every client must be able to tell: an
// answer by its summary, a refusal by its faults. The types here are what the
// generated ones have to fit.

interface Answer {
  summary: string;
}

// The release is no answer to a question, and a table may come as CSV to whoever asks for that.
type Reply = Answer | { release: string } | string | undefined;

interface Refusal {
  code: number;
  message: string;
  details: Detail[];
}

type Detail =
  | { '@type': 'type.googleapis.com/google.rpc.ErrorInfo'; reason: string; domain: string }
  | { '@type': 'type.googleapis.com/google.rpc.BadRequest'; field_violations: Fault[] }
  | { '@type': 'type.googleapis.com/google.rpc.RetryInfo'; retry_delay: string };

interface Fault {
  field?: string;
  reason: string;
  description: string;
}

export class Tally {
  answered = 0;
  refused = 0;
  readonly faults: string[] = [];

  constructor(private readonly client: string) {}

  /** answer counts a reply that must be an answer. */
  answer(operation: string, answer: Reply, refusal: Refusal | undefined): void {
    const said = typeof answer === 'object' && ('summary' in answer ? answer.summary : answer.release);
    if (said) this.answered++;
    else this.fault(operation, answer ?? refusal);
  }

  /** refusal counts a reply that must refuse a field called no_such_field. */
  refusal(operation: string, answer: Reply, refusal: Refusal | undefined): void {
    for (const detail of refusal?.details ?? []) {
      if (detail['@type'] !== 'type.googleapis.com/google.rpc.BadRequest') continue;
      const [fault] = detail.field_violations;
      if (fault?.field === 'no_such_field' && fault.reason === 'UNKNOWN_FIELD') {
        this.refused++;
        return;
      }
    }
    this.fault(operation, answer ?? refusal);
  }

  private fault(operation: string, reply: unknown): void {
    this.faults.push(`${this.client}: ${operation}: ${JSON.stringify(reply)}`);
  }
}

// How a program asks a question: the same JSON in each language, so that a recipe is
// right for whatever is asked. README has whole programs, with refusals read too.

const indented = (body, by) => JSON.stringify(body, null, 2).replaceAll('\n', `\n${by}`);

// pascal is a name as gRPC has it: "short-row" is ShortRow, "planWedge" PlanWedge.
const pascal = (name) => name.split('-').map((part) => part.charAt(0).toUpperCase() + part.slice(1)).join('');

function named(question) {
  const [room, method] = question.split('/');
  return { service: `${pascal(room)}Service`, method: pascal(method), lower: method };
}

// shell puts text between single quotes, which a shell leaves as it is.
const shell = (text) => `'${text.replaceAll("'", "'\\''")}'`;

// goText is a text of Go: as it stands, where it has no backtick.
const goText = (text) => (text.includes('`') ? JSON.stringify(text) : `\`${text}\``);

function python(value, by) {
  const inner = `${by}    `;
  if (value === true) return 'True';
  if (value === false) return 'False';
  if (value === null) return 'None';
  if (typeof value !== 'object') return JSON.stringify(value);
  const several = Array.isArray(value)
    ? value.map((each) => python(each, inner))
    : Object.entries(value).map(([name, each]) => `${JSON.stringify(name)}: ${python(each, inner)}`);
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  const line = `${open}${several.join(', ')}${close}`;
  return line.length < 80 && !line.includes('\n') ? line : `${open}\n${several.map((each) => `${inner}${each},\n`).join('')}${by}${close}`;
}

export const recipes = {
  curl: ({ origin, path, body }) => `curl --json ${shell(JSON.stringify(body))} ${shell(origin + path)}`,

  TypeScript: ({ origin, path, body }) => `// npx openapi-typescript ${origin}/openapi.json --default-non-nullable=false -o knitmath.ts
import createClient from "openapi-fetch";
import type { paths } from "./knitmath.js";

const knitmath = createClient<paths>({ baseUrl: "${origin}" });
const { data, error } = await knitmath.POST("${path}", {
  body: ${indented(body, '  ')},
});
console.log(data?.summary ?? error);
`,

  Go: ({ question, body }) => {
    const { service, method } = named(question);
    return `package main

import (
	"context"
	"fmt"
	"log"

	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"
	"google.golang.org/protobuf/encoding/protojson"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

func main() {
	conn, err := grpc.NewClient("localhost:50051", grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		log.Fatal(err)
	}
	defer conn.Close()
	question := &knitmathv1.${method}Request{}
	if err := protojson.Unmarshal([]byte(${goText(JSON.stringify(body))}), question); err != nil {
		log.Fatal(err)
	}
	answer, err := knitmathv1.New${service}Client(conn).${method}(context.Background(), question)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(answer.GetSummary())
}
`;
  },

  Python: ({ origin, path, body }) => `import json, urllib.request

question = ${python(body, '')}
request = urllib.request.Request("${origin}${path}", json.dumps(question).encode(), {"Content-Type": "application/json"})
answer = json.load(urllib.request.urlopen(request, timeout=5))
print(answer["summary"])
`,

  Kotlin: ({ question, body }) => {
    const { service, method, lower } = named(question);
    return `val channel = ManagedChannelBuilder.forAddress("localhost", 50051).usePlaintext().build()
val question = ${method}Request.newBuilder()
JsonFormat.parser().merge(${JSON.stringify(JSON.stringify(body)).replaceAll('$', '\\$')}, question)
val answer = ${service}GrpcKt.${service}CoroutineStub(channel).${lower}(question.build())
println(answer.summary)
`;
  },

  // In a string between #""" a backslash and # begin an expression: no # stands in the JSON.
  Swift: ({ origin, path, body }) => `struct Answer: Decodable { let summary: String }

var request = URLRequest(url: URL(string: "${origin}${path}")!, timeoutInterval: 5)
request.httpMethod = "POST"
request.setValue("application/json", forHTTPHeaderField: "Content-Type")
request.httpBody = Data(#"""
${indented(body, '').replaceAll('#', String.raw`\u0023`)}
"""#.utf8)
let (data, _) = try await URLSession.shared.data(for: request)
print(try JSONDecoder().decode(Answer.self, from: data).summary)
`,
};

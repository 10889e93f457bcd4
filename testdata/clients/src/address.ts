// orval's clients ask through this function, which knows where the service is.
export async function atAddress<Reply>(path: string, options: RequestInit): Promise<Reply> {
  const response = await fetch(`${process.env.KNITMATH_ADDRESS}${path}`, options);
  return { status: response.status, data: await response.json(), headers: response.headers } as Reply;
}

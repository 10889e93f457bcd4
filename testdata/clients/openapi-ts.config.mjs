// How @hey-api/openapi-ts makes its client.
export default {
  input: '../../gen/openapi/knitmath.openapi.json',
  output: { path: 'build/hey-api' },
  plugins: ['@hey-api/client-fetch', '@hey-api/typescript', '@hey-api/sdk'],
};

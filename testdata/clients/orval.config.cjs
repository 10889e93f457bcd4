// How orval makes its client. It asks at paths alone; the mutator puts the address
// before them.
module.exports = {
  knitmath: {
    input: '../../gen/openapi/knitmath.openapi.json',
    output: {
      target: 'build/orval/client.ts',
      client: 'fetch',
      override: { mutator: { path: 'src/address.ts', name: 'atAddress' } },
    },
  },
};

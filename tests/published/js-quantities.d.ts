declare module 'js-quantities' {
  type Conversion = (value: number) => number;
  const quantities: { swiftConverter(from: string, to: string): Conversion };
  export default quantities;
}

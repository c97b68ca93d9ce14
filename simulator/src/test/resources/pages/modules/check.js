// As much of a test harness as these modules need: named checks, run in order, results as values.
const all = [];

export function test(name, body) {
  all.push({ name, body });
}

export function same(actual, expected) {
  const [is, shouldBe] = [JSON.stringify(actual), JSON.stringify(expected)];
  if (is !== shouldBe) throw new Error(`is ${is}, should be ${shouldBe}`);
}

/** @returns [{name, problem}], problem empty when the check holds */
export async function run(files) {
  const results = [];
  for (const file of files) {
    all.length = 0;
    await import(`/modules/${file}`);
    for (const { name, body } of all) {
      const problem = await Promise.resolve().then(body).then(() => "", String);
      results.push({ name: `${file} ${name}`, problem });
    }
  }
  return results;
}

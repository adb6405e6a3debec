/**
 * A runner for Stryker that loads the tests once and then only switches mutants. Stryker's own runner for vitest
 * starts a new worker for each mutant, which imports everything anew: a second each here, hours for these folders.
 *
 * The tests are found, transformed and collected by vitest, with the configuration beside this file, so that they are
 * the same tests. They are called directly; of the hooks, those of a suite run once.
 *
 * What stays loaded may remember: a test that told a mutant is tried again without it, and if it still fails, this
 * process is given up, so that Stryker tries the mutant in a new one. There nothing can be remembered of others, and the
 * mutant is told; the next one gets a new process again.
 */
import { Script } from 'node:vm';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { commonTokens, declareClassPlugin, PluginKind, tokens } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  MutantRunStatus,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { TestRunner } from 'vitest';
import { collectTests } from 'vitest/internal/browser';
import { createVitest } from 'vitest/node';

/**
 * @typedef {import('@stryker-mutator/api/test-runner').TestResult} TestResult
 * @typedef {import('@stryker-mutator/api/test-runner').DryRunResult} DryRunResult
 * @typedef {import('vitest').RunnerTestSuite} Suite
 * @typedef {{ id: string, name: string, fileName: string, run: () => Promise<void>, ms: number }} LoadedTest
 */

/** Tests that take longer than this, in ms of the processor, are left out: each mutant that they touch would wait. */
const SLOW = 1000;

/**
 * Each so many-th mutant is tried, for an estimate of a large folder, beginning with this one; the others count as
 * errors, not in the score.
 */
const EACH = Number(process.env.NESTLOG_MUTANTS_EACH ?? 1);
const FROM = Number(process.env.NESTLOG_MUTANTS_FROM ?? 0);

/** Whether those are tried that work at loading alone; then no others are. Each takes as long as loading all tests. */
const AT_LOADING = Boolean(process.env.NESTLOG_MUTANTS_LOADING);

/** How long a mutant is hunted, in ms of the processor: its own tests first, then those of the nearest folders, the quick before the slow. */
const HUNT = Number(process.env.NESTLOG_MUTANTS_HUNT ?? 2.5) * 1000;

/**
 * How long a test may take on a mutant, in ms, and how many times as long as without it. On a busy machine it is tried
 * once more with more patience, until the processor has worked at it for as long.
 */
const PATIENCE = 2000;
const LONGER = 4;
const BUSY = 8;

/** Thrown by a test that leaves itself out, as where there is no folder to compare with. */
const LEFT_OUT = 'VITEST_PENDING';

/** Calls what stands in `calling`, so that node can end a loop without an end, and this process lives on. */
const ENDLESS = 'ERR_SCRIPT_EXECUTION_TIMEOUT';
const call = new Script('calling()');

class ResidentRunner {
  static inject = tokens(commonTokens.options);

  /** @type {Map<string, LoadedTest>} */
  tests = new Map();

  /** @type {(() => unknown)[]} what the suites do at their end */
  leaving = [];

  /** Whether a mutant was tried in this process, and the test that remembers it. */
  used = false;
  remembering = '';

  /** @param {import('@stryker-mutator/api/core').StrykerOptions} options */
  constructor(options) {
    this.configFile = /** @type {{ configFile: string }} */ (options.vitest).configFile;
    const globals = /** @type {Record<string, import('@stryker-mutator/api/core').InstrumenterContext>} */ (
      /** @type {unknown} */ (globalThis)
    );
    globals[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {};
    /** What the mutated code looks at, and counts in. */
    this.switches = /** @type {import('@stryker-mutator/api/core').InstrumenterContext} */ (
      globals[INSTRUMENTER_CONSTANTS.NAMESPACE]
    );
  }

  /** What is to be loaded anew is loaded in this process: see `loadWith`. */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const vitest = await createVitest('test', { config: this.configFile, watch: false });
    this.vitest = vitest;
    // Some matchers of vitest look up the worker that they run in.
    Object.assign(globalThis, { __vitest_worker__: { config: vitest.config } });
    for (const setup of vitest.config.setupFiles) await vitest.import(setup);
    const files = await vitest.globTestSpecifications();
    const collected = await collectTests(
      files.map(({ moduleId }) => moduleId),
      {
        config: {
          ...vitest.config,
          setupFiles: [],
          tagsFilter: undefined,
          testNamePattern: vitest.config.testNamePattern,
          testTimeout: 0,
        },
        importFile: (file) => vitest.import(file),
        trace,
      },
    );
    for (const file of collected) {
      if (file.result?.errors) throw new Error(`${file.name}: ${file.result.errors[0]?.message}`);
      await this.load(file, file.filepath, []);
    }
  }

  /**
   * @param {Suite} suite
   * @param {string} fileName
   * @param {Suite[]} parents
   */
  async load(suite, fileName, parents) {
    const suites = [...parents, suite];
    const { beforeAll, afterAll } = TestRunner.getSuiteHooks(suite);
    this.leaving.push(...afterAll.map((hook) => () => hook(suite)));
    for (const hook of beforeAll) await hook(suite);
    for (const task of suite.tasks) {
      if (task.mode === 'skip' || task.mode === 'todo') continue;
      if (task.type === 'suite') {
        await this.load(task, fileName, suites);
        continue;
      }
      const name = [...suites.slice(1), task].map((part) => part.name).join(' ');
      let id = `${fileName}#${name}`;
      while (this.tests.has(id)) id += '+';
      this.tests.set(id, {
        id,
        name: id.slice(fileName.length + 1),
        fileName,
        run: withHooks(task, suites),
        ms: 0,
      });
    }
  }

  /** @returns {Promise<DryRunResult>} */
  async dryRun() {
    const results = [];
    for (const test of this.tests.values()) {
      this.switches.currentTestId = test.id;
      results.push(await this.try(test));
      this.switches.currentTestId = undefined;
    }
    const mutantCoverage = this.switches.mutantCoverage ?? { static: {}, perTest: {} };
    for (const { id, ms } of this.tests.values()) if (ms > SLOW) delete mutantCoverage.perTest[id];
    // What tests reach is tried with them, though loading touches it too: nothing need be loaded anew.
    for (const reached of Object.values(mutantCoverage.perTest))
      for (const mutant of Object.keys(reached)) delete mutantCoverage.static[mutant];
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage };
  }

  /**
   * @param {import('@stryker-mutator/api/test-runner').MutantRunOptions} options
   * @returns {Promise<import('@stryker-mutator/api/test-runner').MutantRunResult>}
   */
  async mutantRun({ activeMutant, testFilter, hitLimit, mutantActivation }) {
    if (Number(activeMutant.id) % EACH !== FROM % EACH || AT_LOADING !== (mutantActivation === 'static'))
      return { status: MutantRunStatus.Error, errorMessage: 'not in the sample' };
    if (this.remembering && !AT_LOADING) throw new Error(`${this.remembering} remembers`);
    const first = !this.used || AT_LOADING;
    this.used = true;
    const broken = AT_LOADING ? await this.loadWith(activeMutant.id) : null;
    if (broken !== null)
      return { status: MutantRunStatus.Killed, failureMessage: broken, killedBy: ['loading'], nrOfTests: 1 };
    const tests = (testFilter ?? [...this.tests.keys()])
      .map((id) => this.tests.get(id))
      .filter((test) => !!test);
    const mirror = activeMutant.fileName.replace(/^.*\bsrc\//, 'tests/').replace(/\.ts$/, '.test.ts');
    /** @param {LoadedTest} test */
    const far = ({ fileName }) => foldersApart(mirror, fileName.replace(/^.*\btests\//, 'tests/'));
    tests.sort((a, b) => far(a) - far(b) || a.ms - b.ms);
    const start = process.cpuUsage().user;
    const results = [];
    Object.assign(this.switches, { activeMutant: activeMutant.id, hitCount: 0, hitLimit });
    let told;
    let endless = false;
    for (const test of tests) {
      const result = await this.try(test);
      results.push(result);
      if (result.status !== TestStatus.Failed) {
        if (!AT_LOADING && process.cpuUsage().user - start > HUNT * 1000) break;
        continue;
      }
      told = test;
      endless = result.failureMessage.includes(ENDLESS);
      break;
    }
    /** @type {DryRunResult | undefined} */
    const reached = endless
      ? { status: DryRunStatus.Timeout }
      : determineHitLimitReached(this.switches.hitCount, hitLimit);
    Object.assign(this.switches, { activeMutant: undefined, hitCount: undefined, hitLimit: undefined });
    if (told && (await this.try(told)).status === TestStatus.Failed) {
      this.remembering = told.id;
      if (!first) throw new Error(`${told.id} remembers`);
    }
    return toMutantRunResult(reached ?? { status: DryRunStatus.Complete, tests: results });
  }

  /**
   * Loads all tests anew with a mutant in force.
   * @param {string} id
   * @returns {Promise<string | null>} why they cannot be loaded
   */
  async loadWith(id) {
    await this.dispose();
    this.tests.clear();
    this.leaving = [];
    this.switches.activeMutant = id;
    try {
      await this.init();
      return null;
    } catch (error) {
      return String(error);
    }
  }

  /**
   * @param {LoadedTest} test
   * @returns {Promise<TestResult>}
   */
  async try(test) {
    const patience =
      this.switches.activeMutant === undefined ? undefined : Math.ceil(PATIENCE + LONGER * test.ms);
    const start = performance.now();
    const before = process.cpuUsage();
    let failureMessage = await this.call(test, patience);
    if (patience !== undefined && failureMessage?.includes(ENDLESS)) {
      const { user, system } = process.cpuUsage(before);
      if (user + system < patience * 800) failureMessage = await this.call(test, patience * BUSY);
    }
    const timeSpentMs = performance.now() - start;
    const { user, system } = process.cpuUsage(before);
    if (this.switches.activeMutant === undefined || test.ms === 0) test.ms = (user + system) / 1000;
    const ran = { id: test.id, name: test.name, fileName: test.fileName, timeSpentMs };
    if (failureMessage?.includes(LEFT_OUT)) return { ...ran, status: TestStatus.Skipped };
    return failureMessage === undefined
      ? { ...ran, status: TestStatus.Success }
      : { ...ran, status: TestStatus.Failed, failureMessage };
  }

  /**
   * @param {LoadedTest} test
   * @param {number | undefined} timeout in ms
   * @returns {Promise<string | undefined>} why it failed
   */
  async call({ run }, timeout) {
    try {
      Object.assign(globalThis, { calling: run });
      await call.runInThisContext({ timeout });
      return undefined;
    } catch (error) {
      return error instanceof Error ? `${error.message} ${'code' in error ? error.code : ''}` : String(error);
    }
  }

  async dispose() {
    for (const leave of this.leaving) await leave();
    await this.vitest?.close();
  }
}

/**
 * How many steps lead from one file to another by their folders.
 * @param {string} one
 * @param {string} other
 */
function foldersApart(one, other) {
  if (one === other) return 0;
  const [a, b] = [one.split('/'), other.split('/')];
  const shared = a.findIndex((name, i) => name !== b[i]);
  return a.length + b.length - 2 * shared;
}

/**
 * Vitest's hook for measuring what it does; nothing is measured here.
 * @template T
 * @param {string} _name
 * @param {unknown} attributes
 * @param {(() => T)=} act
 */
function trace(_name, attributes, act = /** @type {() => T} */ (attributes)) {
  return act();
}

/**
 * The test as a function that also does what its suites ask for around each test.
 * @param {import('vitest').RunnerTestCase} task
 * @param {Suite[]} suites outermost first
 */
function withHooks(task, suites) {
  const around = suites.map((suite) => ({ suite, ...TestRunner.getSuiteHooks(suite) }));
  const run = TestRunner.getTestFn(task);
  return async () => {
    try {
      for (const { suite, beforeEach } of around)
        for (const hook of beforeEach) await hook(task.context, suite);
      await run();
    } finally {
      for (const { suite, afterEach } of around.toReversed())
        for (const hook of afterEach) await hook(task.context, suite);
    }
  };
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'resident', ResidentRunner)];

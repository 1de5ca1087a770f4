import { classDoor as enClassDoor } from './en/classDoor';
import { beam as enBeam } from './en/beam';
import { done as enDone } from './en/done';
import { heard as enHeard } from './en/heard';
import * as enRules from './en/rules';
import { proof as enProof } from './en/proof';
import { states as enStates } from './en/states';
import { spoken as enSpoken } from './en/spoken';
import { tasks as enTasks } from './en/tasks';
import { trade as enTrade } from './en/trade';
import { ui as enUi } from './en/ui';
import { classDoor as esClassDoor } from './es/classDoor';
import { beam as esBeam } from './es/beam';
import { done as esDone } from './es/done';
import { heard as esHeard } from './es/heard';
import { views as enViews } from './en/views';
import * as esRules from './es/rules';
import { proof as esProof } from './es/proof';
import { states as esStates } from './es/states';
import { spoken as esSpoken } from './es/spoken';
import { tasks as esTasks } from './es/tasks';
import { trade as esTrade } from './es/trade';
import { ui as esUi } from './es/ui';
import { views as esViews } from './es/views';

/** One language's whole catalogue. The compiler finds what the other one lacks. */
export type Messages = {
  readonly lang: Lang;
  readonly ui: typeof enUi;
  readonly trade: typeof enTrade;
  readonly tasks: typeof enTasks;
  readonly classDoor: typeof enClassDoor;
  readonly beam: typeof enBeam;
  readonly done: typeof enDone;
  readonly heard: typeof enHeard;
  readonly proof: typeof enProof;
  readonly states: typeof enStates;
  readonly spoken: typeof enSpoken;
  readonly views: typeof enViews;
  readonly rules: typeof enRules.rules;
  readonly dangers: typeof enRules.dangers;
  readonly refusals: typeof enRules.refusals;
  readonly cautions: typeof enRules.cautions;
};

export type Lang = 'en' | 'es';

export const catalogues: Readonly<Record<Lang, Messages>> = {
  en: {
    lang: 'en',
    ui: enUi,
    trade: enTrade,
    tasks: enTasks,
    classDoor: enClassDoor,
    beam: enBeam,
    done: enDone,
    heard: enHeard,
    proof: enProof,
    states: enStates,
    spoken: enSpoken,
    views: enViews,
    rules: enRules.rules,
    dangers: enRules.dangers,
    refusals: enRules.refusals,
    cautions: enRules.cautions,
  },
  es: {
    lang: 'es',
    ui: esUi,
    trade: esTrade,
    tasks: esTasks,
    classDoor: esClassDoor,
    beam: esBeam,
    done: esDone,
    heard: esHeard,
    proof: esProof,
    states: esStates,
    spoken: esSpoken,
    views: esViews,
    rules: esRules.rules,
    dangers: esRules.dangers,
    refusals: esRules.refusals,
    cautions: esRules.cautions,
  },
};

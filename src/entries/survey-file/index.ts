export { readSurveyFile, LONGEST_FILE, type SurveyOptions, type SurveyRead } from './read-survey-file.ts';
export type { SurveyProblem } from './survey-problem.ts';
export { writeSurveyFile } from './write-survey-file.ts';
export { surveyFileSchema } from './survey-file-schema.ts';

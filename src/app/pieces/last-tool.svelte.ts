import type { ToolName } from '../../methods/quantity/index.ts';

/** The tool of the reading that was entered last on this visit: it is most likely still in the hand. */
class LastTool {
  now = $state<ToolName | undefined>(undefined);
}

export const lastTool = new LastTool();

package setwright.job.note;

import setwright.job.Blank;

/**
 * What the title block says about the blank.
 *
 * @param material the words behind the sizes, as typed; empty where there are none
 */
public record BlankNote(Blank blank, String material) {}

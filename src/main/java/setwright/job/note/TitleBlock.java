package setwright.job.note;

import setwright.job.MachineAsItStands;
import setwright.job.Title;
import setwright.quantity.UnitSystem;

/**
 * What a new job starts from, as typed.
 *
 * @param blank its sizes, and the material behind them where {@code material} is empty
 * @param material as people call it; empty where nobody knows
 * @param machine that the job is meant for
 */
public record TitleBlock(
        Title title, String blank, String material, int numberOff, UnitSystem units, MachineAsItStands machine) {}

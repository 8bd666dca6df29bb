package org.fizzhull.decide.advise;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.pressing.Feel;

/**
 * How a design does, from all draws: what a proposal is judged by and what it moves besides.
 *
 * @param chance chance that a piece taken at random floats to the end
 * @param nineOfTen chance that at least nine of ten pieces of the batch do
 * @param mass weight that goes into the bath, kg
 * @param fizzTime time until 1 % is left, s; empty in still water or for a piece that hardly fizzes
 * @param ready when it is dry, s from pressing; empty without drying, or where most draws are not ready within 60 days
 * @param holds chance that it holds as it comes out of the mould; empty for a finished piece
 * @param feel how it most likely comes out of the mould; empty for a finished piece
 * @param cost cost of the mix in one piece, in the user's money; empty without any price
 */
public record Appraisal(
        double chance,
        double nineOfTen,
        double mass,
        Optional<Interval> fizzTime,
        Optional<Interval> ready,
        OptionalDouble holds,
        Optional<Feel> feel,
        OptionalDouble cost) {}

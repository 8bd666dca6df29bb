package org.fizzhull.mesh.uniting;

import java.util.SplittableRandom;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Puts shells in general position: each is grown along the mean normals of its corners, by an amount of its own, and
 * every corner is moved a little at random, so that no four corners lie in one plane. Of two coincident faces that
 * look the same way one then lies outside the other; two that look at each other overlap.
 */
final class PerturbedShells {
    /** Growth of a shell, as a share of the diagonal of the box around all. */
    private static final double SHARE = 2e-6;

    /** How far a corner is moved at random along each axis at most, as a share of the growth. */
    private static final double SHAKE = 1.0 / 16;

    /** Golden ratio less 1: its multiples modulo 1 are evenly spread, so that each shell grows by another amount. */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private PerturbedShells() {}

    /**
     * The corners of some shells, which share none.
     *
     * @param attempt number of the attempt, from 0; later ones grow less, since that is the error of the union, and
     *     have other random numbers
     */
    static Corners of(double[] xyz, int[] corners, int[] shell, int attempt) {
        TriangleMesh mesh = new TriangleMesh(xyz, corners);
        double growth = SHARE / (1 + attempt / 3.0) * FaceSets.diagonal(mesh.box());
        double[] normal = new double[xyz.length];
        int[] shellOf = new int[xyz.length / 3];
        for (int f = 0; f < shell.length; f++) {
            for (int h = 3 * f; h < 3 * f + 3; h++) {
                shellOf[corners[h]] = shell[f];
                for (int k = 0; k < 3; k++) {
                    normal[3 * corners[h] + k] += FaceSets.doubled(mesh, f, (k + 1) % 3, (k + 2) % 3);
                }
            }
        }
        SplittableRandom chance = new SplittableRandom(attempt);
        double[] grown = xyz.clone();
        for (int v = 0; v < shellOf.length; v++) {
            double length = 0;
            for (int k = 0; k < 3; k++) {
                length += normal[3 * v + k] * normal[3 * v + k];
            }
            double part = (shellOf[v] + 1) * GOLDEN;
            double by = growth * (1 + (part - Math.floor(part)) / 2);
            for (int k = 0; k < 3; k++) {
                double along = length > 0 ? normal[3 * v + k] / Math.sqrt(length) : 0;
                grown[3 * v + k] += by * along + SHAKE * growth * (2 * chance.nextDouble() - 1);
            }
        }
        return new Corners(xyz.clone(), grown, 1.6 * growth);
    }
}

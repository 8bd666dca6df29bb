package org.fizzhull.mesh.repair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.fizzhull.evidence.Notice;

/**
 * The closed surfaces of a mesh, turned so that bodies face outward and cavities into the hollow. A surface is a body or
 * a cavity by the number of surfaces around it, never by its volume alone: turning every surface outward would fill the
 * cavities in.
 */
final class MeshBodies {
    /** Most separate surfaces that are told apart. */
    static final int MOST = 1000;

    /** Largest difference between the volumes by x, y and z, as a part of the volume. */
    static final double FLUX_TOLERANCE = 1e-6;

    private final double[] xyz;
    private int[] corners;
    private final MeshRefusals refusals;
    private final List<Notice> notices;
    private int[] label = new int[0];
    private BodySums sums = new BodySums(0);
    private int[] depth = new int[0];
    private List<MeshBody> list = List.of();
    private boolean dropped;

    MeshBodies(double[] xyz, int[] corners, MeshRefusals refusals, List<Notice> notices) {
        this.xyz = xyz;
        this.corners = corners;
        this.refusals = refusals;
        this.notices = notices;
    }

    /** Tells the surfaces apart and turns them; returns the facets that are left. */
    int[] arrange(EdgePairing pairing) {
        FacetJoin join = pairing.joined();
        int count = join.bodies();
        if (count > MOST) {
            throw refusals.manyBodies(count, MOST);
        }
        label = count == 1 ? label : labels(join, count);
        if (pairing.sameWay() > 0) {
            turnMinority(join, count);
        }
        sums = BodySums.of(xyz, corners, label, count);
        if (dropFlat(count)) {
            sums = BodySums.of(xyz, corners, label, sums.count());
        }
        depth = sums.count() == 1 ? new int[1] : Nesting.depths(xyz, corners, label, sums);
        checkFluxes();
        turnInsideOut();
        refuseNested();
        list = listBodies();
        tell();
        return corners;
    }

    private int[] labels(FacetJoin join, int count) {
        int[] labels = new int[corners.length / 3];
        int[] nameOfRoot = new int[labels.length];
        int names = 0;
        for (int f = 0; f < labels.length; f++) {
            int root = join.root(f);
            if (nameOfRoot[root] == 0) {
                nameOfRoot[root] = ++names;
            }
            labels[f] = nameOfRoot[root] - 1;
        }
        if (names != count) {
            throw new IllegalStateException(names + " bodies where " + count + " were joined");
        }
        return labels;
    }

    private int body(int facet) {
        return label.length == 0 ? 0 : label[facet];
    }

    /** Turns the fewer facets of each surface where neighbours disagree. */
    private void turnMinority(FacetJoin join, int count) {
        int[] vote = new int[count];
        for (int f = 0; f < corners.length / 3; f++) {
            vote[body(f)] += join.against(f) ? -1 : 1;
        }
        int turned = 0;
        for (int f = 0; f < corners.length / 3; f++) {
            if (join.against(f) == (vote[body(f)] >= 0)) {
                turn(f);
                turned++;
            }
        }
        if (turned > 0) {
            notices.add(new Notice(
                    "mesh-winding", turned + " facets faced the other way than their neighbours and were turned."));
        }
    }

    private void turn(int facet) {
        int kept = corners[3 * facet + 1];
        corners[3 * facet + 1] = corners[3 * facet + 2];
        corners[3 * facet + 2] = kept;
    }

    /** Leaves out surfaces without volume, two facets back to back for example. */
    private boolean dropFlat(int count) {
        int[] renamed = new int[count];
        int kept = 0;
        for (int b = 0; b < count; b++) {
            boolean flat = !(Math.abs(sums.volume(b)) > sums.flatVolume(b));
            renamed[b] = flat ? -1 : kept++;
        }
        if (kept == count) {
            return false;
        }
        if (kept == 0) {
            throw refusals.flat(corners.length / 3 + " facets that enclose nothing");
        }
        int used = 0;
        for (int f = 0; f < corners.length / 3; f++) {
            int body = renamed[label[f]];
            if (body >= 0) {
                System.arraycopy(corners, 3 * f, corners, 3 * used, 3);
                label[used++] = body;
            }
        }
        notices.add(new Notice(
                "mesh-flat-part",
                (count - kept) + " parts without volume (" + (corners.length / 3 - used) + " facets) were left out."));
        corners = Arrays.copyOf(corners, 3 * used);
        label = Arrays.copyOf(label, used);
        sums = new BodySums(kept);
        dropped = true;
        return true;
    }

    private void checkFluxes() {
        for (int b = 0; b < sums.count(); b++) {
            if (!(sums.fluxSpread(b) <= FLUX_TOLERANCE * Math.abs(sums.volume(b)))) {
                throw refusals.fluxes(sums.middle(b));
            }
        }
    }

    /** Turns each free body that is inside out, together with everything inside it. */
    private void turnInsideOut() {
        boolean[] turned = new boolean[sums.count()];
        int count = 0;
        for (int b = 0; b < turned.length; b++) {
            int outermost = sums.outermost(b);
            turned[b] = sums.volume(outermost) < 0;
            count += turned[b] ? 1 : 0;
        }
        if (count == 0) {
            return;
        }
        for (int f = 0; f < corners.length / 3; f++) {
            if (turned[body(f)]) {
                turn(f);
            }
        }
        for (int b = 0; b < turned.length; b++) {
            if (turned[b]) {
                sums.turn(b);
            }
        }
        notices.add(new Notice(
                "mesh-inverted",
                (turned.length == 1 ? "The surface was" : count + " of " + turned.length + " surfaces were")
                        + " inside out; the facets were turned."));
    }

    private void refuseNested() {
        int wrong = 0;
        int first = -1;
        for (int b = 0; b < depth.length; b++) {
            boolean outward = sums.volume(b) > 0;
            if (outward != ((depth[b] & 1) == 0)) {
                wrong++;
                first = first < 0 ? b : first;
            }
        }
        if (wrong > 0) {
            throw refusals.nested(wrong, sums.middle(first));
        }
    }

    private List<MeshBody> listBodies() {
        List<MeshBody> bodies = new ArrayList<>();
        for (int b = 0; b < depth.length; b++) {
            bodies.add(sums.body(b, depth[b]));
        }
        bodies.sort(Comparator.comparingDouble(body -> -Math.abs(body.volume())));
        return bodies;
    }

    private void tell() {
        int solid = 0;
        int hollow = 0;
        double hollowVolume = 0;
        for (MeshBody body : list) {
            solid += body.cavity() ? 0 : 1;
            hollow += body.cavity() ? 1 : 0;
            hollowVolume -= body.cavity() ? body.volume() : 0;
        }
        if (solid > 1) {
            notices.add(new Notice("mesh-bodies", solid + " separate bodies are taken as one rigid piece."));
        }
        if (hollow > 0) {
            notices.add(new Notice(
                    "mesh-cavity",
                    (hollow == 1 ? "1 closed hollow" : hollow + " closed hollows") + " of "
                            + Where.cubicCentimetres(hollowVolume)
                            + " cm3 inside. If this is the mould and not the piece, export the piece."));
        }
    }

    /** The surfaces, largest first. */
    List<MeshBody> list() {
        return list;
    }

    /** Whether facets were left out. */
    boolean droppedFacets() {
        return dropped;
    }
}

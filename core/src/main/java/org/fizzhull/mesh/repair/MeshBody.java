package org.fizzhull.mesh.repair;

import java.util.List;

/**
 * One closed surface of a mesh: a body, or a cavity in one.
 *
 * @param facets number of facets
 * @param volume enclosed volume, m3; negative for a cavity
 * @param depth number of other surfaces around it: 0 for a body that stands free, 1 for a cavity, 2 for a loose body in
 *     a cavity
 * @param lowX smallest x, m
 * @param lowY smallest y, m
 * @param lowZ smallest z, m
 * @param highX largest x, m
 * @param highY largest y, m
 * @param highZ largest z, m
 */
public record MeshBody(
        int facets,
        double volume,
        int depth,
        double lowX,
        double lowY,
        double lowZ,
        double highX,
        double highY,
        double highZ) {
    /**
     * {@return the box around some surfaces, with their number of facets and their volume in sum}
     *
     * @param bodies the bodies
     */
    public static MeshBody around(List<MeshBody> bodies) {
        MeshBody sum = bodies.get(0);
        for (MeshBody body : bodies.subList(1, bodies.size())) {
            sum = new MeshBody(
                    sum.facets + body.facets,
                    sum.volume + body.volume,
                    0,
                    Math.min(sum.lowX, body.lowX),
                    Math.min(sum.lowY, body.lowY),
                    Math.min(sum.lowZ, body.lowZ),
                    Math.max(sum.highX, body.highX),
                    Math.max(sum.highY, body.highY),
                    Math.max(sum.highZ, body.highZ));
        }
        return sum;
    }

    /** {@return whether it is a hollow inside another body} */
    public boolean cavity() {
        return volume < 0;
    }
}

package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.quantity.check.Given;

/** Writes a mesh as STL bytes, coordinates rounded to float32. */
public final class StlWriter {
    private StlWriter() {}

    /**
     * {@return binary STL; the buffer stands at its start}
     *
     * @param mesh the mesh, m
     * @param header text of the header; ASCII, cut after 80 characters, not beginning with {@code solid}
     * @param metresPerUnit length of one unit of the file, m
     */
    public static ByteBuffer binary(TriangleMesh mesh, String header, double metresPerUnit) {
        Given.all("header", header);
        Given.finite("metres per unit", metresPerUnit);
        ByteBuffer bytes = ByteBuffer.allocate(
                        Math.addExact(StlBinary.HEADER, Math.multiplyExact(StlBinary.FACET, mesh.facetCount())))
                .order(ByteOrder.LITTLE_ENDIAN);
        byte[] name = header.getBytes(StandardCharsets.US_ASCII);
        bytes.put(name, 0, Math.min(80, name.length)).putInt(80, mesh.facetCount());
        double[] normal = new double[3];
        for (int f = 0; f < mesh.facetCount(); f++) {
            int at = StlBinary.HEADER + StlBinary.FACET * f;
            normal(mesh, f, normal);
            for (int axis = 0; axis < 3; axis++) {
                bytes.putFloat(at + 4 * axis, (float) normal[axis]);
                for (int corner = 0; corner < 3; corner++) {
                    bytes.putFloat(at + 12 + 12 * corner + 4 * axis, unit(mesh, f, corner, axis, metresPerUnit));
                }
            }
        }
        return bytes.rewind();
    }

    /**
     * {@return ASCII STL with one {@code solid}; lines end with LF}
     *
     * @param mesh the mesh, m
     * @param name name of the solid, on one line
     * @param metresPerUnit length of one unit of the file, m
     */
    public static byte[] ascii(TriangleMesh mesh, String name, double metresPerUnit) {
        Given.all("name", name);
        Given.finite("metres per unit", metresPerUnit);
        StringBuilder text = new StringBuilder(260 * mesh.facetCount() + 64);
        text.append("solid ").append(name).append('\n');
        double[] normal = new double[3];
        for (int f = 0; f < mesh.facetCount(); f++) {
            normal(mesh, f, normal);
            text.append("  facet normal ").append((float) normal[0]).append(' ');
            text.append((float) normal[1]).append(' ').append((float) normal[2]).append("\n    outer loop\n");
            for (int corner = 0; corner < 3; corner++) {
                text.append("      vertex");
                for (int axis = 0; axis < 3; axis++) {
                    text.append(' ').append(unit(mesh, f, corner, axis, metresPerUnit));
                }
                text.append('\n');
            }
            text.append("    endloop\n  endfacet\n");
        }
        return text.append("endsolid ").append(name).append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    private static float unit(TriangleMesh mesh, int facet, int corner, int axis, double metresPerUnit) {
        return (float) (mesh.at(mesh.corner(facet, corner), axis) / metresPerUnit);
    }

    private static void normal(TriangleMesh mesh, int facet, double[] out) {
        for (int axis = 0; axis < 3; axis++) {
            out[axis] = FaceSets.doubled(mesh, facet, (axis + 1) % 3, (axis + 2) % 3);
        }
        double length = Math.sqrt(out[0] * out[0] + out[1] * out[1] + out[2] * out[2]);
        for (int axis = 0; axis < 3 && length > 0; axis++) {
            out[axis] /= length;
        }
    }
}

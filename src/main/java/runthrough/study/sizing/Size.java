package runthrough.study.sizing;

import runthrough.plant.StorageForm;

/**
 * An accumulator of a certain size.
 *
 * @param form of the accumulator at this size; what is adjusted (stroke, sag or diameter) is given by {@link
 *     StorageForm#adjustable}
 */
public record Size(StorageForm form) {

    /** Usable capacity C (m). */
    public double capacity() {
        return form.capacity();
    }
}

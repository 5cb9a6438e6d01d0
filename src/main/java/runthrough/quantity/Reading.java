package runthrough.quantity;

/** What came of reading a quantity: the quantity, or why it could not be read. */
public sealed interface Reading permits Quantity, Reading.Unreadable {

    /**
     * Not a quantity of the kind asked for.
     *
     * @param rule what is allowed, to follow "value; " in a message
     * @param remedy how to mend it, a sentence or two
     */
    record Unreadable(String rule, String remedy) implements Reading {}
}

package setwright.command;

import setwright.caution.Severity;
import setwright.file.JobFile;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/** The check of a demonstration job as text, and how to go on from there. */
record Demonstration(Terminal terminal) {
    void print(String name, String job) {
        Shop shop = new ShopShelf(null, terminal.folder()).shop(null);
        JobCheck check = JobCheck.of(name, JobFile.read(job, shop), shop);
        if (check instanceof JobCheck.Unreadable unreadable) {
            throw new Complaint(CheckCommand.complaint(unreadable));
        }
        @org.jspecify.annotations.Nullable UnitSystem asWritten = null;
        terminal.line(new CheckText((JobCheck.Worked) check, Severity.NOTE, asWritten).text());
        terminal.line("""
                There is no display here, so this is the demonstration job as text. Where there is one, the same
                command opens the window:
                  mvn -q compile exec:java
                Every command works without a display; 'check' with a job of your own, for instance:
                  mvn -q compile exec:java -Dexec.args="check demo-jobs/bearing-block.setwright.json"
                  mvn -q compile exec:java -Dexec.args="figure spindle-speed cutting-speed=90ft/min diameter=1/2in"
                  mvn -q compile exec:java -Dexec.args="--help\"""");
    }
}

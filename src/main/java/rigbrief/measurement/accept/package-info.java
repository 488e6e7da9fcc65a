/** The acceptance test: what to measure, and whether what was measured keeps what was promised. */
package rigbrief.measurement.accept;

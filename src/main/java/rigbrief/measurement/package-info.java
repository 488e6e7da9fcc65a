/** Setting promised against measured: what was measured, on which machine, at which settings. */
package rigbrief.measurement;

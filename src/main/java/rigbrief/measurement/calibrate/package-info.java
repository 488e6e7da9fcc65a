/** Fitting demands of workloads and rates of parts to measurements. */
package rigbrief.measurement.calibrate;

/** Sound levels: adding, distance, fan speed, weighting and room criteria. */
package rigbrief.model.noise;

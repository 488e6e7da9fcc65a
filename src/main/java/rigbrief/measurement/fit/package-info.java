/** Robust fits with priors: what they find, how sure of it they are, and what sways them. */
package rigbrief.measurement.fit;

namespace Lampwright.Heat.Network;

/// <summary>From one switch position to the next: what changes of a light's network, and what stays as it was laid.</summary>
public sealed partial class LightNetwork
{
    private int firstResistor;
    private int firstHeat;

    private LightNetwork(LightNetwork like, LightNetworkSpec spec)
    {
        this.spec = spec;
        (Room, Junction, Case, Base, Fins, Panels) = (
            like.Room,
            like.Junction,
            like.Case,
            like.Base,
            like.Fins,
            like.Panels
        );
        (ChannelAir, CompartmentAir, Driver, Resistors) = (
            like.ChannelAir,
            like.CompartmentAir,
            like.Driver,
            like.Resistors
        );
        (FrontAir, Reflector, Diffuser) = (like.FrontAir, like.Reflector, like.Diffuser);
        (firstResistor, firstHeat) = (like.firstResistor, like.firstHeat);
        Network = like.Network.With(Links, Sources);
    }

    /// <summary>The same light at another position, for which nothing but heats, resistances to the base and resistors are looked at.</summary>
    /// <param name="position">The light at that position.</param>
    /// <returns>The network; laid anew where the position differs in more.</returns>
    internal LightNetwork At(LightNetworkSpec position)
    {
        var same =
            position.Resistors.Count == spec.Resistors.Count
            && spec
                == position with
                {
                    EmitterW = spec.EmitterW,
                    EmitterWPerK = spec.EmitterWPerK,
                    JunctionAtK = spec.JunctionAtK,
                    JunctionKPerW = spec.JunctionKPerW,
                    CaseKPerW = spec.CaseKPerW,
                    DriverW = spec.DriverW,
                    Resistors = spec.Resistors,
                    ReflectorW = spec.ReflectorW,
                    DiffuserW = spec.DiffuserW,
                };
        return same ? new(this, position) : Of(position);
    }

    /// <summary>The same light with other errors of the methods.</summary>
    /// <param name="factors">The errors.</param>
    internal LightNetwork Under(NetworkFactors factors) => new(spec with { Factors = factors }, Network);

    /// <summary>Sets junction, case and resistors where the nodes they hang on put them: each has one way out for all its heat.</summary>
    /// <param name="kelvin">Temperature of each node, K.</param>
    internal void HangOn(Span<double> kelvin)
    {
        var (f, emitterW) = (spec.Factors, spec.EmitterW * spec.Factors.EmitterHeat);
        kelvin[Case] = kelvin[Base] + (emitterW * spec.CaseKPerW);
        kelvin[Junction] = kelvin[Case] + (emitterW * spec.JunctionKPerW);
        for (var i = 0; i < Resistors.Count; i++)
        {
            kelvin[Resistors[i]] =
                kelvin[CompartmentAir] + (spec.Resistors[i].HeatW * f.DriverHeat * Rise(spec.Resistors[i]));
        }
    }

    private NetworkSource EmitterSource()
    {
        var error = spec.Factors.EmitterHeat;
        return new(Junction, spec.EmitterW * error, spec.EmitterWPerK * error, spec.JunctionAtK);
    }

    private Conduction ToCase() => new(Junction, Case, 1 / Guard.Positive(spec.JunctionKPerW));

    private Conduction ToBase() => new(Case, Base, 1 / Guard.Positive(spec.CaseKPerW));

    private NetworkSource DriverSource() => new(Driver, spec.DriverW * spec.Factors.DriverHeat);

    private NetworkSource ResistorSource(int i) => new(Resistors[i], spec.Resistors[i].HeatW * spec.Factors.DriverHeat);

    private Conduction ResistorToAir(int i) => new(Resistors[i], CompartmentAir, 1 / Rise(spec.Resistors[i]));

    private double Rise(NetworkResistor r) => Math.Max(r.KPerW, LeastResistorKPerW) * spec.Factors.ResistorRise;

    private NetworkSource ReflectorSource() =>
        new(Reflector >= 0 ? Reflector : Diffuser, spec.ReflectorW * spec.Factors.AbsorbedLight);

    private NetworkSource DiffuserSource() =>
        new(Diffuser >= 0 ? Diffuser : Reflector, spec.DiffuserW * spec.Factors.AbsorbedLight);

    // What differs between positions, in the places where the first position put it.
    private void Links(NetworkLink[] at)
    {
        (at[0], at[1]) = (ToCase(), ToBase());
        for (var i = 0; i < Resistors.Count; i++)
        {
            at[firstResistor + i] = ResistorToAir(i);
        }
    }

    private void Sources(NetworkSource[] at)
    {
        at[0] = EmitterSource();
        at[firstHeat] = DriverSource();
        for (var i = 0; i < Resistors.Count; i++)
        {
            at[firstHeat + 1 + i] = ResistorSource(i);
        }

        if (Reflector >= 0 || Diffuser >= 0)
        {
            (at[^2], at[^1]) = (ReflectorSource(), DiffuserSource());
        }
    }
}

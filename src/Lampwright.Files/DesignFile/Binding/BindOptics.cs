using Lampwright.Design;

namespace Lampwright.Files.DesignFile.Binding;

/// <summary>Reflectors, diffusers and the subject.</summary>
internal static class BindOptics
{
    public static Reflector Reflector(TableReader r)
    {
        var part = r.Reference("part");
        return new Reflector(r.Name)
        {
            Part = part.Length == 0 ? null : part,
            Small = r.Size("small"),
            Large = r.Size("large"),
            Depth = r.Optional("depth"),
            Reflectance = r.WithDefault("reflectance"),
            Specular = r.WithDefault("specular"),
        };
    }

    public static Diffuser Diffuser(TableReader r)
    {
        var diffuser = new Diffuser(r.Name)
        {
            Size = r.Size("size"),
            Thickness = r.Optional("thickness"),
            Transmittance = r.WithDefault("transmittance"),
            Reflectance = r.WithDefault("reflectance"),
            TemperatureMax = r.Optional("temperature_max"),
            Mass = r.Optional("mass"),
            Holes = BindHoles.Patterns(r),
        };
        var sum = diffuser.Transmittance.Nominal + diffuser.Reflectance.Nominal;
        if (sum > 1)
        {
            r.Context.Wrong(
                r.Node("transmittance") ?? r.Written!,
                r.Path + ".transmittance",
                $"and reflectance add up to {sum:0.##}",
                "at most 1 together: what is neither passed nor thrown back is absorbed"
            );
        }

        return diffuser;
    }

    public static Subject? Subject(TableReader r) =>
        r.IsThere
            ? new Subject
            {
                Distance = r.WithDefault("distance"),
                Size = r.Size("size"),
                Iso = r.WithDefault("iso").Nominal,
                Shutter = r.WithDefault("shutter"),
            }
            : null;
}
